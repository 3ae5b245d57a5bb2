BeforeAll {
    Import-Module "$PSScriptRoot/Support/Samples.psm1" -Force
}

Describe 'Test-LayerFile' {
    BeforeEach {
        $folder = Join-Path $TestDrive ([guid]::NewGuid())
        $hero = Copy-Fixture groups-nested (Join-Path $folder 'hero.psd')
        $odd = Copy-Fixture canvas-odd-width (Join-Path $folder 'odd.psd')
        $broken = Join-Path $folder 'broken.psd'
        Set-Content -LiteralPath $broken 'no layered file'
        Push-Location -LiteralPath $folder
    }

    AfterEach { Pop-Location }

    It 'takes paths, files and layered files' {
        $expected = Test-LayerFile -Path .\odd.psd
        $expected.Rule | Should -Contain OddCanvasWidth
        (Get-Item $odd | Test-LayerFile).Rule | Should -Be $expected.Rule
        (Get-LayerFile $odd | Test-LayerFile).Rule | Should -Be $expected.Rule
        (Test-LayerFile -LiteralPath $odd).Rule | Should -Be $expected.Rule
    }

    It 'says what is wrong in plain values' {
        $finding = Test-LayerFile $odd -Rule OddCanvasWidth
        $finding.Severity | Should -Be 'Error'
        $finding.Measured | Should -Be '17 px'
        $finding.FilePath | Should -Be $odd
        $finding.Remedy | Should -BeLike 'Get-LayerFile * | Set-LayerCanvas -Width 18 | Save-LayerFile -InPlace -BackupFolder *'
    }

    It 'gives remedies that work as they stand' {
        Invoke-Expression (Test-LayerFile $odd -Rule OddCanvasWidth).Remedy
        (Get-LayerFile $odd).Width | Should -Be 18
        Test-LayerFile $odd -Rule OddCanvasWidth | Should -BeNullOrEmpty
        (Get-ChildItem (Join-Path $folder 'before')).Count | Should -Be 1
    }

    It 'gives remedies that parse and name only parameters that exist' {
        $found = Test-LayerFile "$PSScriptRoot/../Fixtures/*.psd" -ErrorAction Ignore -WarningAction Ignore | Where-Object Remedy -Like 'Get-LayerFile*'
        $found.Count | Should -BeGreaterThan 100
        foreach ($finding in $found | Group-Object Rule | ForEach-Object { $_.Group | Select-Object -First 20 }) {
            $errors = $null
            $tree = [System.Management.Automation.Language.Parser]::ParseInput($finding.Remedy, [ref] $null, [ref] $errors)
            $errors | Should -BeNullOrEmpty -Because $finding.Remedy
            foreach ($command in $tree.FindAll({ $args[0] -is [System.Management.Automation.Language.CommandAst] }, $true)) {
                $info = Get-Command $command.GetCommandName() -ErrorAction Stop
                foreach ($element in $command.CommandElements | Where-Object { $_ -is [System.Management.Automation.Language.CommandParameterAst] }) {
                    { $info.ResolveParameter($element.ParameterName) } | Should -Not -Throw -Because "-$($element.ParameterName) in: $($finding.Remedy)"
                }
            }
        }
    }

    It 'sums up by rule' {
        $sums = Test-LayerFile $hero -Summary -Rule NameOffProfile, UnmarkedPart, Canvas*
        $all = Test-LayerFile $hero -Rule NameOffProfile, UnmarkedPart, Canvas*
        ($sums | Measure-Object Count -Sum).Sum | Should -Be @($all).Count
        $sums.Rule | Sort-Object | Should -Be ($all.Rule | Sort-Object -Unique)
        foreach ($sum in $sums) {
            $sum.Severity | Should -Be ($all | Where-Object Rule -EQ $sum.Rule)[0].Severity
            # The command puts all right, or shows each.
            { Invoke-Expression $sum.Remedy } | Should -Not -Throw
        }

        Test-LayerFile $hero -Summary | Out-String -Width 120 | Should -Match '(?m)^Severity Count Rule'
    }

    It 'gives a sum or an answer, not both' {
        { Test-LayerFile $hero -Summary -Quiet } | Should -Throw '*Leave one of them out*'
    }

    It 'tells facts that came back from JSON from paths' {
        { Get-LayerFile $hero | ConvertTo-Json -WarningAction Ignore | ConvertFrom-Json | Test-LayerFile -ErrorAction Stop } | Should -Throw '*Begin with Get-LayerFile and a path*'
    }

    It 'counts pending edits' {
        Get-LayerFile $odd | Set-LayerCanvas -Width 18 | Test-LayerFile -Rule OddCanvasWidth | Should -BeNullOrEmpty
    }

    It 'chooses rules with wildcards' {
        (Test-LayerFile $odd -Rule *canvas*).Rule | Should -Be 'OddCanvasWidth', 'CanvasSizeOffProfile'
        (Test-LayerFile $odd -Rule *canvas* -ExcludeRule odd*).Rule | Should -Be 'CanvasSizeOffProfile'
    }

    It 'refuses an unknown rule and names those of a like name' {
        $failure = { Test-LayerFile $odd -Rule OddWidth } | Should -Throw -ErrorId 'RuleNotFound,*' -PassThru
        $failure.Exception.Message | Should -BeLike '*did you mean OddCanvasWidth?*'
        { Test-LayerFile $odd -ExcludeRule zz* } | Should -Throw -ErrorId 'RuleNotFound,*'
    }

    It 'asks a rule that the profile switches off only if it is named in full' {
        $profile = ConvertTo-Json -Depth 5 @{ name = 'lenient'; rules = @{ OddCanvasWidth = @{ severity = 'none' } } }
        Set-Content -LiteralPath lenient.layerprofile.json $profile
        Test-LayerFile $odd -Profile .\lenient.layerprofile.json -Rule OddCanvas* | Should -BeNullOrEmpty
        (Test-LayerFile $odd -Profile .\lenient.layerprofile.json -Rule OddCanvasWidth).Severity | Should -Be 'Error'
    }

    It 'lists what is bad enough' {
        (Test-LayerFile $odd -Severity Error).Severity | Sort-Object -Unique | Should -Be 'Error'
        { Test-LayerFile $odd -Severity None } | Should -Throw -ErrorId 'ParameterArgumentValidationError,*'
    }

    It 'says true or false with -Quiet' {
        Test-LayerFile $odd, $hero -Rule OddCanvasWidth -Quiet | Should -Be $false, $true
        Test-LayerFile $hero -Rule NoCenterGuide -Quiet | Should -BeTrue -Because 'a note is no reason to say no'
        Test-LayerFile $hero -Rule NoCenterGuide -Quiet -Severity Note | Should -BeFalse
    }

    It 'goes on after a file that cannot be read, which is not good' {
        $streams = Get-Streams { Test-LayerFile .\*.psd -Rule OddCanvasWidth -Quiet -ErrorAction Continue }
        $streams.Errors.Count | Should -Be 1
        $streams.Errors[0].FullyQualifiedErrorId | Should -BeLike 'NotALayeredFile,*'
        $streams.Output | Should -Be $false, $true, $false
    }

    It 'goes on after a part that is damaged' {
        $damaged = Copy-Item "$PSScriptRoot/../Fixtures/damaged/*" -Include *.psd -Destination $folder -PassThru
        $streams = Get-Streams { Test-LayerFile .\*.psd -WarningAction Ignore -ErrorAction Continue }
        $streams.Errors.Count | Should -BeGreaterThan 1
        $streams.Output.FilePath | Should -Contain $odd
    }

    It 'writes a SARIF log of all files' {
        $log = Test-LayerFile .\*.psd -AsSarif .\findings.sarif -ErrorAction Ignore
        $log | Should -BeOfType IO.FileInfo
        $run = (Get-Content $log -Raw | ConvertFrom-Json).runs[0]
        $run.tool.driver.name | Should -Be LayerTools
        $run.results.locations.physicalLocation.artifactLocation.uri | Sort-Object -Unique | Should -Be 'hero.psd', 'odd.psd'
        $run.invocations[0].executionSuccessful | Should -BeFalse
        $run.invocations[0].toolExecutionNotifications[0].locations[0].physicalLocation.artifactLocation.uri | Should -Be 'broken.psd'
    }

    It 'never writes over a log unasked, nor with -WhatIf' {
        Set-Content -LiteralPath findings.sarif 'mine'
        { Test-LayerFile $odd -AsSarif .\findings.sarif } | Should -Throw -ErrorId 'DestinationExists,*'
        Test-LayerFile $odd -AsSarif .\findings.sarif -Force -WhatIf
        Get-Content findings.sarif | Should -Be 'mine'
        Test-LayerFile $odd -AsSarif .\findings.sarif -Force -Quiet | Should -BeFalse
        Get-Content findings.sarif | Should -Not -Be 'mine'
    }

    It 'shows findings that read well at 120 columns' {
        $text = Test-LayerFile $odd -Rule *Canvas* | Out-String -Width 120
        $lines = $text -replace '\x1b\[[0-9;]*m' -split '\r?\n'
        $lines | ForEach-Object { $_.Length | Should -BeLessOrEqual 120 }
        $text | Should -Match "File: .*odd\.psd"
        $text | Should -Match 'error.*OddCanvasWidth.*17 px'
    }

    It 'completes rules with what they ask' {
        $found = (TabExpansion2 'Test-LayerFile -Rule OddC' 25).CompletionMatches
        $found.CompletionText | Should -Be 'OddCanvasWidth'
        $found.ToolTip | Should -Be 'The canvas width is odd (error)'
    }
}
