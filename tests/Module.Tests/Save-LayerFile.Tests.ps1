BeforeAll {
    Import-Module "$PSScriptRoot/Support/Samples.psm1" -Force
    $ErrorActionPreference = 'Continue'
}

Describe 'Save-LayerFile' {
    BeforeEach {
        $folder = Join-Path $TestDrive ([guid]::NewGuid())
        $path = Copy-Fixture groups-nested (Join-Path $folder 'hero.psd')
        $original = (Get-FileHash -LiteralPath $path).Hash
        $file = Get-LayerFile $path
        $file | Rename-Layer -LayerNumber 8 -NewName Torso > $null
        Push-Location -LiteralPath $folder
    }

    AfterEach { Pop-Location }

    Context '-Destination' {
        It 'writes to a folder, made if missing, and leaves the original' {
            $out = $file | Save-LayerFile ready/deep
            $out | Should -BeOfType IO.FileInfo
            $out.FullName | Should -Be (Join-Path $folder 'ready/deep/hero.psd')
            (Get-Layer $out.FullName -LayerNumber 8).Name | Should -Be 'Torso'
            (Get-FileHash -LiteralPath $path).Hash | Should -Be $original
            $file.Path | Should -Be $path -Because 'the object still stands for its source'
        }

        It 'puts out files that the next command finds, brackets or not, and whose table shows folder and size' {
            $out = $file | Save-LayerFile 'hero[1].psd'
            ($out | Get-LayerFile).Path | Should -Be (Join-Path $folder 'hero[1].psd')
            $table = $out | Out-String -Width 300
            $table | Should -BeLike "*$folder*"
            $table | Should -Match ([regex]::Escape($out.Length.ToString([cultureinfo]::InvariantCulture)))
        }

        It 'refuses to replace a read-only file, also with -Force' {
            Set-Content other.psd 'mine'
            Set-ItemProperty other.psd IsReadOnly $true
            $result = Get-Streams { $file | Save-LayerFile other.psd -Force }
            $result.Errors[0] | Should -BeLike '*read-only*'
            Get-Content other.psd | Should -Be 'mine'
            Set-ItemProperty other.psd IsReadOnly $false
        }

        It 'writes to a file' {
            ($file | Save-LayerFile -Destination other.PSD).Name | Should -Be 'other.PSD'
        }

        It 'flags edits as saved' {
            $file | Save-LayerFile other.psd > $null
            $file.PendingCount | Should -Be 0
            $file.Changes.Saved | Should -Be $true
        }

        It 'writes over an existing file only with -Force' {
            Set-Content other.psd 'mine'
            $result = Get-Streams { $file | Save-LayerFile other.psd }
            $result.Output | Should -BeNullOrEmpty
            $result.Errors.Count | Should -Be 1
            Get-Content other.psd | Should -Be 'mine'
            ($file | Save-LayerFile other.psd -Force).Length | Should -BeGreaterThan 100
        }

        It 'keeps a copy of what it writes over' {
            Set-Content other.psd 'mine'
            $file | Save-LayerFile other.psd -Force -BackupFolder kept > $null
            Get-Content kept/other*.psd | Should -Be 'mine'
        }

        It 'refuses the source as the destination, also with -Force' {
            (Get-Streams { $file | Save-LayerFile hero.psd -Force }).Errors[0] | Should -BeLike '*-InPlace*'
            (Get-FileHash -LiteralPath $path).Hash | Should -Be $original
        }

        It 'refuses the second of two inputs for one destination, also with -Force' {
            $twin = Get-LayerFile (Copy-Fixture ag-plain (Join-Path $folder 'twin/hero.psd'))
            $result = Get-Streams { $file, $twin | Save-LayerFile ready -Force }
            $result.Output.Count | Should -Be 1
            $result.Errors[0].FullyQualifiedErrorId | Should -BeLike 'DestinationTaken,*'
            (Get-Layer ready/hero.psd -LayerNumber 8).Name | Should -Be 'Torso'
            (Get-Streams { $file, $twin | Save-LayerFile one.psd -Force }).Errors[0] | Should -BeLike "*is the destination of $path already*"
        }

        It 'refuses a name that says another format' {
            $result = Get-Streams { $file | Save-LayerFile other.psb }
            $result.Errors[0].FullyQualifiedErrorId | Should -BeLike 'OtherFormat,*'
            Test-Path other.psb | Should -BeFalse
        }

        It 'refuses places that are not on a disk' {
            (Get-Streams { $file | Save-LayerFile env:X }).Errors[0].FullyQualifiedErrorId | Should -BeLike 'NotAFilePath,*'
        }

        It 'makes nothing with -WhatIf' {
            $file | Save-LayerFile ready -WhatIf | Should -BeNullOrEmpty
            Test-Path ready | Should -BeFalse
            $file.PendingCount | Should -Be 1
        }
    }

    Context '-InPlace' {
        It 'replaces the original, keeping a copy, and can go on' {
            ($file | Save-LayerFile -InPlace -BackupFolder kept).FullName | Should -Be $path
            (Get-Layer $path -LayerNumber 8).Name | Should -Be 'Torso'
            (Get-FileHash (Get-Item kept/hero*.psd)).Hash | Should -Be $original
            $file | Rename-Layer -LayerNumber 8 -NewName Trunk | Save-LayerFile -InPlace > $null
            (Get-Layer $path -LayerNumber 8).Name | Should -Be 'Trunk'
        }

        It 'does nothing without pending edits' {
            $file | Save-LayerFile -InPlace > $null
            $time = (Get-Item -LiteralPath $path).LastWriteTimeUtc
            (Get-Streams { $file | Save-LayerFile -InPlace -Verbose }).Verbose -like '*left as it is*' | Should -HaveCount 1
            (Get-Item -LiteralPath $path).LastWriteTimeUtc | Should -Be $time
        }

        It 'refuses a file that changed on disk since it was read' {
            $second = Get-LayerFile $path | Rename-Layer -LayerNumber 8 -NewName Other
            $file | Save-LayerFile -InPlace > $null
            $result = Get-Streams { $second | Save-LayerFile -InPlace }
            $result.Errors[0].FullyQualifiedErrorId | Should -BeLike 'SourceChanged,*'
            (Get-Layer $path -LayerNumber 8).Name | Should -Be 'Torso'
            (Get-Streams { $second | Save-LayerFile other.psd -Force }).Errors[0].FullyQualifiedErrorId | Should -BeLike 'SourceChanged,*'
        }

        It 'takes no -Force and no destination' {
            { $file | Save-LayerFile -InPlace -Force } | Should -Throw
            { $file | Save-LayerFile other.psd -InPlace } | Should -Throw
        }
    }

    Context 'with layers' {
        It 'saves their file once, whole, and says how many were piped' {
            $result = Get-Streams { $file | Get-Layer -Leaf | Save-LayerFile other.psd }
            $result.Output.Count | Should -Be 1
            $result.Information | Should -BeLike '*wrote 8 layers (4 were piped)'
            (Get-Layer other.psd).Count | Should -Be 8
        }

        It 'saves nothing if the stream breaks off' {
            { & { $file | Get-Layer; throw 'broken off' } | Save-LayerFile other.psd } | Should -Throw 'broken off'
            Test-Path other.psd | Should -BeFalse
        }

        It 'saves nothing if it is stopped' {
            $begun = [Threading.ManualResetEventSlim]::new()
            $shell = [powershell]::Create()
            try {
                $run = $shell.AddScript({
                        param($Module, $Path, $Begun)
                        Import-Module $Module
                        Get-Layer $Path | ForEach-Object { $_; $Begun.Set(); Start-Sleep -Seconds 60 } | Save-LayerFile (Join-Path (Split-Path $Path) 'other.psd')
                    }).AddArgument($env:LAYERTOOLS_MODULE).AddArgument($path).AddArgument($begun).BeginInvoke()
                $begun.Wait(30000) | Should -BeTrue
                $shell.Stop()
                { $shell.EndInvoke($run) } | Should -Throw
            }
            finally { $shell.Dispose() }

            Get-ChildItem -Force | ForEach-Object Name | Should -Be 'hero.psd'
        }

        It 'goes on after a file that cannot be saved' {
            $other = Get-LayerFile (Copy-Fixture ag-plain (Join-Path $folder 'other.psd'))
            New-Item -ItemType Directory ready > $null
            Set-Content ready/hero.psd 'mine'
            $result = Get-Streams { ($file | Get-Layer), ($other | Get-Layer) | ForEach-Object { $_ } | Save-LayerFile ready }
            $result.Errors.Count | Should -Be 1
            $result.Output.Name | Should -Be 'other.psd'
        }
    }
}
