BeforeAll {
    Import-Module "$PSScriptRoot/Support/Samples.psm1" -Force
    $ErrorActionPreference = 'Continue'
    $path = Copy-Fixture groups-nested (Join-Path $TestDrive 'hero.psd')
    $marked = Copy-Fixture ag-marks-and-locks (Join-Path $TestDrive 'marked.psd')
}

Describe 'Get-Layer' {
    It 'lists front to back, each group before what is in it' {
        $layers = Get-Layer $path
        $layers.LayerPath | Should -Be 'Figure', 'Figure/Arm L', 'Figure/Arm L/Arm L', 'Figure/Head', 'Figure/Head/Eye L', 'Figure/Head/Eye L/Eye L', 'Figure/Head/Head', 'Figure/Body'
        $layers.LayerNumber | Should -Be (1..8)
        $layers.FilePath | Select-Object -Unique | Should -Be $path
    }

    It 'takes a path, a file and a read file' {
        (Get-Layer -LiteralPath $path).Count | Should -Be 8
        (Get-Item $path | Get-Layer).Count | Should -Be 8
        (Get-LayerFile $path | Get-Layer).Count | Should -Be 8
        (Get-Layer -InputObject (Get-LayerFile $path)).Count | Should -Be 8
    }

    It 'sees pending edits of a read file' {
        (Get-LayerFile $path | Rename-Layer -LayerNumber 8 -NewName Torso | Get-Layer -LayerNumber 8).Name | Should -Be 'Torso'
    }

    It 'chooses by <Filter>' -ForEach @(
        @{ Filter = @{ Name = 'eye*' }; Numbers = 5, 6 }
        @{ Filter = @{ Name = 'HEAD', 'body' }; Numbers = 4, 7, 8 }
        @{ Filter = @{ LayerPath = 'Figure/Head/*' }; Numbers = 5, 6, 7 }
        @{ Filter = @{ LiteralLayerPath = 'Figure/Head' }; Numbers = @(4) }
        @{ Filter = @{ LayerNumber = 8, 1 }; Numbers = 1, 8 }
        @{ Filter = @{ Kind = 'Pixel' }; Numbers = 3, 6, 7, 8 }
        @{ Filter = @{ Side = 'Left' }; Numbers = 2, 3, 5, 6 }
        @{ Filter = @{ Side = 'Left'; Leaf = $true }; Numbers = 3, 6 }
        @{ Filter = @{ Name = '*e*'; Kind = 'Group'; Side = 'None' }; Numbers = 1, 4 }
        @{ Filter = @{ Name = 'nobody*' }; Numbers = @() }
    ) {
        @(Get-Layer $path @Filter | ForEach-Object LayerNumber) | Should -Be $Numbers
    }

    It 'chooses by mark' {
        (Get-Layer $marked -Mark Red, Blue).Name | Should -Be 'Arm L'
        (Get-Layer $marked -Mark Green).Name | Should -Be 'Head'
    }

    It 'has an error for a layer that is named exactly and is not there' {
        $result = Get-Streams { Get-Layer $path -LiteralLayerPath 'figure/head' }
        $result.Errors[0].FullyQualifiedErrorId | Should -BeLike 'LayerNotFound,*'
        $result.Errors[0].CategoryInfo.Category | Should -Be 'ObjectNotFound'
        (Get-Streams { Get-Layer $path -LayerNumber 1, 99 }).Errors[0] | Should -BeLike '*no layer number 99*'
    }

    It 'compares names without any culture' {
        $culture = [cultureinfo]::CurrentCulture
        try {
            [cultureinfo]::CurrentCulture = 'tr-TR'
            (Get-Layer $path -Name 'FIGURE').LayerNumber | Should -Be 1
        }
        finally { [cultureinfo]::CurrentCulture = $culture }
    }

    It 'gives plain values that survive CSV and JSON, and leads on' {
        $layer = Get-Layer $path -LayerNumber 6
        ($layer | ConvertTo-Json -EnumsAsStrings | ConvertFrom-Json).LayerPath | Should -Be 'Figure/Head/Eye L/Eye L'
        ($layer | ConvertTo-Csv | ConvertFrom-Csv).Side | Should -Be 'Left'
        $layer.GetParent().LayerNumber | Should -Be 5
        $layer.GetFile().LayerCount | Should -Be 8
    }

    It 'is a table that shows hidden layers and groups in words' {
        $text = Get-Layer $path | Out-String -Width 140
        $text | Should -Match '2\s+Arm L/\s+group\s+left\s+5 x 10 at 21, 12\s+hidden'
        $text | Should -Match '3\s+Arm L\s+pixel\s+left\s+5 x 10 at 21, 12\s+in hidden group'
    }
}
